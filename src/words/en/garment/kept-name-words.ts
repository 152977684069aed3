/** Something kept, with its garment: what pages are called. */
export function keptNameWords(garment: string, kept: string): string {
  return `${garment}: ${kept}`;
}
