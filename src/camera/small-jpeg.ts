/** Sides and qualities that are tried, the best first: the last comes out under 30 KB, whatever is on it. */
const TRIES = [
  [1600, 0.8],
  [1280, 0.7],
  [1000, 0.6],
  [640, 0.6],
  [320, 0.5],
] as const;

/**
 * A picture as a JPEG of so many bytes at the most, as good as that allows. What a camera wrote
 * beside the picture, such as the place it was taken at, isn't in it.
 *
 * @throws an Error where the browser has no memory for it
 */
export async function smallJpeg(picture: HTMLCanvasElement, most: number): Promise<Blob> {
  let last: Blob | undefined;
  for (const [side, quality] of TRIES) {
    last = await jpegOf(picture, side, quality);
    if (last.size <= most) return last;
  }
  throw new Error(`a picture of ${last?.size} bytes`);
}

function jpegOf(picture: HTMLCanvasElement, side: number, quality: number): Promise<Blob> {
  const by = Math.min(1, side / Math.max(picture.width, picture.height));
  const small = document.createElement('canvas');
  small.width = Math.max(1, Math.round(picture.width * by));
  small.height = Math.max(1, Math.round(picture.height * by));
  const pen = small.getContext('2d');
  if (!pen) throw new Error('no memory for the picture');
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(picture, 0, 0, small.width, small.height);
  return new Promise((made, failed) => {
    small.toBlob(
      (blob) => (blob ? made(blob) : failed(new Error('no memory for the picture'))),
      'image/jpeg',
      quality,
    );
  });
}
