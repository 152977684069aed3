import type { Canvas } from './canvas.ts';

/** How the light falls; places as shares of the picture's longer side from its middle. */
export interface LightSpec {
  /** Change of brightness from one side to the other, and its direction in radians. */
  readonly slope: number;
  readonly slopeAngle: number;
  /** Darkening in the corners. */
  readonly vignette: number;
  /** A shadow with an edge: how dark, where, which way, and how soft. */
  readonly shadow?: { dark: number; at: number; angle: number; soft: number };
  /** A patch of glare: grey added in its middle. */
  readonly glare?: { grey: number; x: number; y: number; radius: number };
}

export function lightUp(canvas: Canvas, light: LightSpec): void {
  const { width, height, values } = canvas;
  const long = Math.max(width, height);
  const { shadow, glare } = light;
  const slope = [
    light.slope * Math.cos(light.slopeAngle),
    light.slope * Math.sin(light.slopeAngle),
  ];
  const edge = shadow ? [Math.cos(shadow.angle), Math.sin(shadow.angle)] : [0, 0];
  for (let py = 0; py < height; py++) {
    const y = (py - height / 2) / long;
    for (let px = 0; px < width; px++) {
      const x = (px - width / 2) / long;
      let factor =
        (1 + slope[0]! * x + slope[1]! * y) * (1 - light.vignette * 2.6 * (x * x + y * y));
      if (shadow) {
        const into = (x * edge[0]! + y * edge[1]! - shadow.at) / shadow.soft;
        factor *= 1 - shadow.dark * Math.min(1, Math.max(0, 0.5 + into));
      }
      let grey = values[py * width + px]! * factor;
      if (glare) {
        const away = ((x - glare.x) ** 2 + (y - glare.y) ** 2) / glare.radius ** 2;
        if (away < 9) grey += glare.grey / (1 + away) ** 3;
      }
      values[py * width + px] = grey;
    }
  }
}
