import { expect, test } from 'vitest';
import { findInName } from '../../../shared/bench/index.ts';

const FINDS = ['P3-12', 'P3-124', 'P7-165'];

test.each([
  { name: 'P3-124.jpg', find: 'P3-124' },
  { name: 'p3-12 front.JPG', find: 'P3-12' },
  { name: 'marsh_P7-165_b.jpeg', find: 'P7-165' },
  { name: 'IMG_1234.jpg', find: null },
  { name: 'P3-1245.jpg', find: null },
  { name: 'P3-12 and P7-165.jpg', find: null },
])('$name shows $find', ({ name, find }) => {
  expect(findInName(name, FINDS)).toBe(find);
});
