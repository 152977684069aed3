import type { PageSymbol } from '../tape/characters/read-page.ts';

/** What the engine's worker says of one job. */
export interface EngineReply {
  jobId?: string;
  status: 'resolve' | 'reject' | 'progress';
  data?: unknown;
}

interface Box {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
}

interface Part {
  text?: string;
  confidence?: number;
  bbox?: Box;
  paragraphs?: readonly Part[];
  lines?: readonly Part[];
  words?: readonly Part[];
  symbols?: readonly Part[];
}

/** Every character in what the engine recognised, in its reading order, whatever it nests them in. */
export function symbolsOf(recognised: unknown): PageSymbol[] {
  const blocks = (recognised as { blocks?: readonly Part[] | null } | null)?.blocks ?? [];
  return blocks.flatMap(charactersIn);
}

function charactersIn(part: Part): PageSymbol[] {
  const inner = part.symbols ?? part.words ?? part.lines ?? part.paragraphs;
  if (inner) return inner.flatMap(charactersIn);
  const { text, confidence, bbox } = part;
  return text !== undefined && confidence !== undefined && bbox
    ? [{ text, confidence, x0: bbox.x0, y0: bbox.y0, x1: bbox.x1, y1: bbox.y1 }]
    : [];
}
