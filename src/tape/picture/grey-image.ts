/** A grey picture the right way up: 0 is black, 255 white, row after row. */
export interface GreyImage {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
}
