import { useState } from 'preact/hooks';
import type { PaperPage } from '../../../drawing/paper-job.ts';
import { PageView } from './page-view.tsx';

interface Props {
  pages: readonly PaperPage[];
  named: (page: number, pages: number) => string;
}

/** Each page as it will be printed; a press on one makes it large enough to read. */
export function Pages({ pages, named }: Props) {
  const [large, setLarge] = useState<number>();
  return (
    <div class="pages">
      {pages.map((page, i) => {
        const isLarge = large === i;
        return (
          <button
            type="button"
            key={i}
            class={isLarge ? 'large' : undefined}
            aria-pressed={isLarge}
            onClick={() => setLarge(isLarge ? undefined : i)}
          >
            <PageView page={page} name={named(i + 1, pages.length)} />
          </button>
        );
      })}
    </div>
  );
}
