/**
 * Holds the page's icon in memory from now on, as a picture of dots. A browser asks for it anew each
 * time the address is written, and each key that is typed writes it: that keeps the worker in charge
 * awake, so that a newer one is held up, and wakes it for nothing where no newer one waits. The
 * drawing it is at first is opened as a page of its own each time, which took longer than the key.
 */
export async function holdIcon(): Promise<void> {
  const icon = document.querySelector<HTMLLinkElement>('link[rel=icon]');
  const dots = document.querySelector<HTMLLinkElement>('link[rel=apple-touch-icon]');
  if (!icon || !dots) return;
  try {
    const file = await fetch(dots.href);
    if (file.ok) icon.href = URL.createObjectURL(await file.blob());
  } catch {
    // Without a connection it stays where it is.
  }
}
