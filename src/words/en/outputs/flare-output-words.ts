/** What flare gives, and what the hand does for it. */
export const flareOutputWords = {
  hem: 'Hem, all round',
  spread: 'Spread of each slash at the hem',
  slash: 'Slash the pattern to each point, spread it so far at the hem',
  godetLong: 'Length of the cloth for a godet',
  cutLong: 'Cut each godet so long, along its middle',
  godetWide: 'Width of the cloth for a godet',
  cutWide: 'Cut each godet so wide at its hem',
  godets: 'Godets to cut',
  edge: 'Slit of a godet, from the hem line',
  cutSlit: 'Stay the end of the slit, cut to just short of it',
  added: 'What one godet adds',
  chord: 'Straight across a godet at the hem line',
  long: 'Length then',
  jog: 'Jog of each side edge',
  change: 'Change of length',
  redraw: 'Spread or fold the pattern at a line, draw its edges anew',
};
