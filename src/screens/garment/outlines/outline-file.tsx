import { useRef, useState } from 'preact/hooks';
import { fileWords as words } from '#words/garment/outline-file-words.ts';
import type { Bench } from '../../../calculation/bench.ts';
import { Rich } from '../../../controls/rich.tsx';
import type { PieceForm } from '../../../garment/record/piece-said.ts';
import { Deed } from '../parts/deed.tsx';
import { sizeText } from './outline-size.ts';

/** An outline found in a file. Lengths in 1/8000 mm. */
export interface FoundOutline {
  name: string;
  form: PieceForm;
  size: { long: number; wide: number };
  /** Why it can't be taken. */
  refused?: string | undefined;
}

/** What a file gave. */
export type FileRead =
  | { kind: 'outlines'; found: readonly FoundOutline[]; said: readonly string[] }
  /** It doesn't say how long its units are. */
  | { kind: 'units' }
  | { kind: 'refused'; said: string };

interface Props {
  bench: Bench;
  /** Of the piece. */
  name: string;
  fold: boolean;
  /** @param unitMm how long a unit of it is, where it doesn't say so */
  onRead: (file: File, unitMm?: number) => Promise<FileRead>;
  onTake: (form: PieceForm) => void;
  onBack: () => void;
}

/** A unit a file may be drawn in, in mm. */
const UNITS = { mm: 1, cm: 10, in: 25.4, px: 25.4 / 96 } as const;

const FAILED: FileRead = { kind: 'refused', said: words.failed };

/** Reads a drawing, and lets one of its outlines be taken. */
export function OutlineFile({ bench, name, fold, onRead, onTake, onBack }: Props) {
  const [file, setFile] = useState<File>();
  const [found, setFound] = useState<FileRead | 'reading'>();
  const looks = useRef(0);
  const look = async (chosen: File, unitMm?: number) => {
    looks.current += 1;
    const own = looks.current;
    setFile(chosen);
    setFound('reading');
    const read = await onRead(chosen, unitMm).catch((): FileRead => FAILED);
    // One that took longer than another chosen after it is no longer asked for.
    if (own === looks.current) setFound(read);
  };
  return (
    <div class="reading one">
      <h1>{name}</h1>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key */}
      <section class="scroll" tabIndex={0} aria-label={words.title}>
        <p class="said">{words.about}</p>
        <label class="plain">
          {words.choose}
          {/* A phone knows no type for such files, and would hide them if it were asked for one. */}
          <input
            type="file"
            class="unseen"
            onChange={({ currentTarget }) => {
              const [chosen] = currentTarget.files ?? [];
              currentTarget.value = '';
              if (chosen) void look(chosen);
            }}
          />
        </label>
        <div role="status">{found && <Found {...{ found, fold, bench, onTake }} />}</div>
        {found !== 'reading' && found?.kind === 'units' && file && (
          <div class="deeds">
            {(['mm', 'cm', 'in', 'px'] as const).map((unit) => (
              <Deed
                key={unit}
                words={words.unit[unit]}
                onPress={() => void look(file, UNITS[unit])}
              />
            ))}
          </div>
        )}
        <div class="deeds">
          <Deed words={words.back} onPress={onBack} />
        </div>
      </section>
    </div>
  );
}

type FoundProps = Pick<Props, 'bench' | 'fold' | 'onTake'> & { found: FileRead | 'reading' };

function Found({ found, fold, bench, onTake }: FoundProps) {
  const [refused, setRefused] = useState<string>();
  if (found === 'reading') return <p class="said">{words.reading}</p>;
  if (found.kind === 'units') return <p class="said">{words.units}</p>;
  if (found.kind === 'refused') {
    return (
      <p class="said warning">
        <Rich text={found.said} />
      </p>
    );
  }
  return (
    <>
      <p class="said">{words.found(found.found.length)}</p>
      {[...found.said, ...(refused === undefined ? [] : [refused])].map((one) => (
        <p class="said warning" key={one}>
          <Rich text={one} />
        </p>
      ))}
      <div class="deeds">
        {found.found.map(({ name, form, size, refused: why }, at) => (
          <Deed
            key={at}
            words={words.shape(at + 1, name)}
            hint={sizeText(size, fold, bench)}
            onPress={() => (why === undefined ? onTake(form) : setRefused(why))}
          />
        ))}
      </div>
    </>
  );
}
