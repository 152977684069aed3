/** How long the processor has worked for this process, all its threads together, in ms. */
export function cpuMs() {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}
