/** A published rule, as the app says it. */
export interface Quote {
  /** What the source says, restated. */
  says: string;
  /**
   * Title, kind and year, never a publisher that still trades, a shop or an address. The full
   * reference stands in the comment above the figure (`src/sewing/sources`).
   */
  source: string;
}

/** A rule with its source after it. */
export const quoted = ({ says, source }: Quote) => `${says} (${source})`;
