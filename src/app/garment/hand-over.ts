/** A file that was chosen on one screen, until another looks at it. */
let chosen: File | undefined;

export function handOver(file: File): void {
  chosen = file;
}

/** The file that was handed over, once. */
export function takeOver(): File | undefined {
  const file = chosen;
  chosen = undefined;
  return file;
}
