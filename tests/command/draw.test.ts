import { optimize } from 'svgo';
import { describe, expect, test } from 'vitest';
import { runPitlore } from './run-pitlore.ts';

describe('draw', () => {
  test('writes a whole SVG to scale, with what it shows in words', () => {
    const { code, out, err } = runPitlore(['draw', 'P3-124', '--view', 'face', '--mm-per-px', '0.5']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    // svgo throws on markup that is not well formed.
    expect(optimize(out).data).toContain('<svg');
    expect(out).toContain('<title>Bone pin, 92 mm long.</title>');
    const [, widthPx] = /width="([\d.]+)"/.exec(out) ?? [];
    const [, widthMm] = /viewBox="\S+ \S+ ([\d.]+) /.exec(out) ?? [];
    expect(Number(widthPx)).toBeCloseTo(Number(widthMm) / 0.5, 1);
  });

  test('the same find gives the same bytes', () => {
    expect(runPitlore(['draw', 'P7-165']).out).toBe(runPitlore(['draw', 'P7-165']).out);
  });

  test('a find that is not there is answered with the nearest', () => {
    const { code, out, err } = runPitlore(['draw', 'P3-12']);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain('P3-123');
  });

  test.each([
    { name: 'no find', argv: ['draw'] },
    { name: 'an unknown view', argv: ['draw', 'P3-124', '--view', 'back'] },
    { name: 'a scale of nothing', argv: ['draw', 'P3-124', '--mm-per-px', '0'] },
  ])('$name is not understood', ({ argv }) => {
    expect(runPitlore(argv).code).toBe(2);
  });
});
