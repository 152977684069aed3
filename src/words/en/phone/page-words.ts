/** What the page and the installed app say of themselves before any script. */
export const pageWords = {
  /** As BCP 47 has it. */
  lang: 'en',
  title: 'Thumbrule: sewing-bench arithmetic',
  description: 'Thumbrule: sewing-bench arithmetic for one hand. Everything stays on this phone.',
  installed: 'Sewing-bench arithmetic for one hand, with or without a connection.',
};
