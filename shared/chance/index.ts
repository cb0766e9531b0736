export { derive, stream, type Stream } from './stream.ts';
export { pick, shuffle, uniformBelow, uniform } from './draw.ts';
