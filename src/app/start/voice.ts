/** Speaks a sentence, stopping the one before it. Does nothing where the phone can't or won't. */
export function speak(words: string): void {
  const voice = globalThis.speechSynthesis;
  if (!voice) return;
  try {
    voice.cancel();
    const said = new SpeechSynthesisUtterance(words);
    said.lang = document.documentElement.lang;
    voice.speak(said);
  } catch {
    // The mark is on the screen, too: a voice that fails must not keep the maker from the next.
  }
}
