const rotate = (word: number, by: number): number => (word << by) | (word >>> (32 - by));

/** The message with its end marked and its length in bits, in blocks of 64 bytes. */
function padded(bytes: readonly number[]): readonly number[] {
  const zeros = (119 - (bytes.length % 64)) % 64;
  const bits = bytes.length * 8;
  const length = [24, 16, 8, 0].map((shift) => (bits >>> shift) & 255);
  const high = Math.floor(bits / 2 ** 32);
  return [...bytes, 128, ...Array<number>(zeros).fill(0), 0, 0, high >>> 8, high & 255, ...length];
}

/** What is mixed in round by round: a choice, a parity, a majority, and the parity again, each with its constant. */
const mixed = (round: number, b: number, c: number, d: number): number => {
  if (round < 20) return ((b & c) | (~b & d)) + 0x5a827999;
  if (round < 40) return (b ^ c ^ d) + 0x6ed9eba1;
  if (round < 60) return ((b & c) | (b & d) | (c & d)) + 0x8f1bbcdc;
  return (b ^ c ^ d) + 0xca62c1d6;
};

/**
 * The SHA-1 digest of some bytes, as 20 bytes. It names things; it keeps no secret. The steps are those of FIPS 180-4,
 * section 6.1 (FM; held against another implementation in the tests).
 *
 * @example sha1([]).slice(0, 4) // [0xda, 0x39, 0xa3, 0xee]
 */
export function sha1(bytes: readonly number[]): readonly number[] {
  const message = padded(bytes);
  let state: readonly number[] = [0x67452301, 0xefcdab89, 0x98badcfe, 0x10325476, 0xc3d2e1f0];
  for (let block = 0; block < message.length; block += 64) {
    const words: number[] = [];
    for (let at = block; at < block + 64; at += 4) {
      const [first = 0, second = 0, third = 0, fourth = 0] = message.slice(at, at + 4);
      words.push((first << 24) | (second << 16) | (third << 8) | fourth);
    }
    for (let at = 16; at < 80; at += 1) {
      const far = [at - 3, at - 8, at - 14, at - 16].map((back) => words[back] ?? 0);
      words.push(
        rotate(
          far.reduce((all, word) => all ^ word, 0),
          1,
        ),
      );
    }
    let [a = 0, b = 0, c = 0, d = 0, e = 0] = state;
    for (const [round, word] of words.entries()) {
      const next = (rotate(a, 5) + mixed(round, b, c, d) + e + word) | 0;
      [a, b, c, d, e] = [next, a, rotate(b, 30), c, d];
    }
    const added = [a, b, c, d, e];
    state = state.map((word, at) => (word + (added[at] ?? 0)) | 0);
  }
  return state.flatMap((word) => [24, 16, 8, 0].map((shift) => (word >>> shift) & 255));
}
