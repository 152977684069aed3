import { workTogether } from '../browser/together.ts';
import { pressTogether } from '../browser/together-in-hand.ts';
import { withApp } from './with-app.ts';

/**
 * `npm run two-tabs`: two tabs of one device change the same garments, and others, at the
 * same time, `CHANGES=n`; then both have one garment in hand and press Made on the same row,
 * take presses back and change its fields, `PRESSES=n`. Whatever the app confirmed must be there.
 */
const CHANGES = Number(process.env.CHANGES ?? 1200);
const PRESSES = Number(process.env.PRESSES ?? 600);

await withApp(async (browser, address) => {
  const seed = Number(process.env.SEED ?? 1 + Math.floor(Math.random() * 2_000_000_000));
  const changed = await workTogether(browser, address, { changes: Math.ceil(CHANGES / 2), seed });
  const { asked, confirmed, overlapping } = changed;
  console.log(
    `${asked} changes asked of two tabs, ${confirmed} confirmed (${overlapping} while the other was at work), ${asked - confirmed} not possible while the other had deleted the garment, ${changed.lost.length} lost; seed ${seed}`,
  );
  const pressed = await pressTogether(browser, address, { orders: Math.ceil(PRESSES / 2), seed });
  const { make, back, settle, type } = pressed.kept;
  console.log(
    `${pressed.asked} things done to a garment in both tabs' hands: ${make} presses of Made, ${back} taken back, ${settle} fields settled, ${type} left pending, kept; ${pressed.asked - make - back - settle - type} refused in words; ${pressed.lost.length} lost; seed ${seed}`,
  );
  const faults = [changed, pressed].flatMap(({ lost, complaints }) => [...lost, ...complaints]);
  for (const fault of faults) console.log(`  ${fault}`);
  process.exitCode = faults.length > 0 || confirmed === 0 || make === 0 ? 1 : 0;
});
