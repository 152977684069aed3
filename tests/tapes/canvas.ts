/** Grey being made: 0 black, 255 white, not yet rounded, row after row. */
export interface Canvas {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

export function canvasOf(width: number, height: number): Canvas {
  return { width, height, values: new Float32Array(width * height) };
}
