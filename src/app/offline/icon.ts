/**
 * Holds the page's icon in memory from now on. A browser asks for it anew each time the address
 * is written, and each key that is typed writes it: that keeps the worker in charge awake, so
 * that a newer one is held up, and wakes it for nothing where no newer one waits.
 */
export async function holdIcon(): Promise<void> {
  const icon = document.querySelector<HTMLLinkElement>('link[rel=icon]');
  if (!icon) return;
  try {
    const file = await fetch(icon.href);
    if (file.ok) icon.href = URL.createObjectURL(await file.blob());
  } catch {
    // Without a connection it stays where it is.
  }
}
