/** Text as it should be said: units in words, fractions joined by "and". */
export function spoken(text: string): string {
  return text
    .replace(/(\d) (\d+\/\d+)/g, '$1 and $2')
    .replace(/(\d) in\b/g, '$1 inches')
    .replace(/(\d) cm\b/g, '$1 centimetres')
    .replace(/(\d) mm\b/g, '$1 millimetres');
}
