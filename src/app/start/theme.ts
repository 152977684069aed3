import type { Bench } from '../../calculation/bench.ts';

/** Shows the page in a theme, the phone's bars with it. */
export function showTheme(theme: Bench['theme']): void {
  const root = document.documentElement;
  root.dataset.theme = theme;
  const ground = getComputedStyle(document.body).backgroundColor;
  document.querySelector('meta[name=theme-color]')?.setAttribute('content', ground);
}
