/** Long enough for the phone to have taken the file. */
const TAKEN_MS = 10_000;

/** Hands a file to the phone. */
export function saveFile(name: string, file: Blob): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = safeName(name);
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), TAKEN_MS);
}

/**
 * Hands a file to another app of the phone; where the phone refuses, it is saved. Browsers share
 * only kinds of files they know to do no harm: another is handed over as text, where that is all
 * it is.
 *
 * @returns what became of it: the maker may have called it off
 */
export async function shareFile(
  name: string,
  file: Blob,
): Promise<'shared' | 'saved' | 'called off'> {
  const files = [asFile(name, file, file.type), asFile(`${name}.txt`, file, 'text/plain')];
  const taken = files.find((one) => navigator.canShare?.({ files: [one] }));
  try {
    if (!taken) throw new TypeError('no such file can be shared');
    await navigator.share({ files: [taken] });
    return 'shared';
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return 'called off';
    saveFile(name, file);
    return 'saved';
  }
}

function asFile(name: string, file: Blob, type: string): File {
  return new File([file], safeName(name), { type });
}

/** A name no system chokes on: letters and digits of any alphabet, spaces, dots and hyphens. */
export function safeName(name: string): string {
  const end = /\.[a-z]+$/.exec(name)?.[0] ?? '';
  const kept = name
    .slice(0, name.length - end.length)
    .normalize('NFC')
    .replace(/[^\p{L}\p{M}\p{N} .-]+/gu, '-')
    .replace(/^[\s.-]+/, '');
  return ([...kept].slice(0, 80 - end.length).join('') || 'file') + end;
}
