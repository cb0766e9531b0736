const isPressed = (bytes: Uint8Array): boolean => bytes[0] === 0x1f && bytes[1] === 0x8b;

/**
 * The program of the solver. It is served pressed by gzip, which spares a device two thirds of it; where a server says
 * so in its answer, the browser has undone that already.
 *
 * @throws Error where the address gives no file.
 */
export async function fetchSolver(address: string): Promise<ArrayBuffer> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  const bytes = await response.arrayBuffer();
  if (!isPressed(new Uint8Array(bytes))) return bytes;
  const whole = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'));
  return new Response(whole).arrayBuffer();
}
