import { workTogether } from '../browser/together.ts';
import { withApp } from './with-app.ts';

/**
 * `npm run two-tabs`: two tabs of one device change the same garments, and others, at the
 * same time; whatever the app confirmed must be there. `CHANGES=n` for another number.
 */
const CHANGES = Number(process.env.CHANGES ?? 1200);

await withApp(async (browser, address) => {
  const seed = 1 + Math.floor(Math.random() * 2_000_000_000);
  const { asked, confirmed, overlapping, lost, complaints } = await workTogether(browser, address, {
    changes: Math.ceil(CHANGES / 2),
    seed,
  });
  for (const fault of [...lost, ...complaints]) console.log(`  ${fault}`);
  console.log(
    `${asked} changes asked of two tabs, ${confirmed} confirmed (${overlapping} while the other was at work), ${asked - confirmed} not possible while the other had deleted the garment, ${lost.length} lost; seed ${seed}`,
  );
  process.exitCode = lost.length + complaints.length > 0 || confirmed === 0 ? 1 : 0;
});
