/** What is said of a hem that is turned up and of one that is faced. */
export const turnedWords = {
  notGiven: 'not given',
  section: 'Section through the hem, layers drawn apart',
  sectionDepth: (depth: string) => `depth ${depth}`,
  sectionTurn: (turn: string) => `turn ${turn}`,
  cut: 'Cut length',
  tryOn: 'Try on before you cut: a sleeve, leg or skirt cut short stays short.',
  iron: (celsius: number) =>
    `Pressing: follow the care label, lower figure first (one dot at most ${celsius} °C); test on a scrap, touch the iron by its handle only.`,
  line: 'Line',
};
