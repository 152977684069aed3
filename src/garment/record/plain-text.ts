/**
 * Signs that turn round the order in which what follows is shown (Unicode Standard Annex 9, explicit
 * directional formatting): of a name they turn the numbers beside it, too. The marks that only say which
 * way a sign reads stay: they are part of how some languages are written.
 */
const TURNING = /[\u202a-\u202e\u2066-\u2069]/gu;

/** A text as it is shown beside others: without what would turn them round. */
export function plainText(text: string): string {
  return text.replace(TURNING, '');
}
