/** How much is made, of steps or of the marks of a row: of one alone there is nothing to count. */
export function howMuchMade(made: number, of: number): string {
  if (of !== 1) return `${made} of ${of} made`;
  return made === 1 ? 'made' : 'not made yet';
}
