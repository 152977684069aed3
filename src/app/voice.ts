/** Speaks a sentence, stopping the one before it. Does nothing where the phone can't speak. */
export function speak(words: string): void {
  const voice = globalThis.speechSynthesis;
  if (!voice) return;
  voice.cancel();
  const said = new SpeechSynthesisUtterance(words);
  said.lang = document.documentElement.lang;
  voice.speak(said);
}
