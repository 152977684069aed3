import { CALCULATION_NAMES } from '#words/calculations/calculation-names.ts';
import { oursOf, PUBLISHED } from '../calculations/published-examples.ts';

/** `npm run published`: each published example, what its source prints and what ours gives. */
const rows = await Promise.all(
  PUBLISHED.map(async (example) => ({
    row: example.row,
    calculation: CALCULATION_NAMES[example.of],
    'published example': example.says,
    printed: `${example.printed} ${example.as}`.trim(),
    ours: `${await oursOf(example)} ${example.as}`.trim(),
    why: example.why,
  })),
);
console.table(rows);
