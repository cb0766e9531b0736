/**
 * Milliseconds of processor that this thread spends in a run: on a machine that does other work, the clock would count
 * theirs too.
 *
 * @example processorMs(() => sort(finds)) < 50
 */
export function processorMs(run: () => void): number {
  const before = process.threadCpuUsage();
  run();
  const { user, system } = process.threadCpuUsage(before);
  return (user + system) / 1000;
}
