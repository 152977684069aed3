import { cleanup, configure } from '@testing-library/preact';
import { options } from 'preact';
import { afterAll, vi } from 'vitest';

// Preact's own clock for effects falls back on a timer of Node's, which can go off after
// the last test of a file, when the page is already gone. Frames of the page end with it.
options.requestAnimationFrame = (runEffects) => {
  window.requestAnimationFrame(runEffects);
};

// A part fetched later may take its time on a busy machine; a test that passes doesn't wait for it.
configure({ asyncUtilTimeout: 30_000 });

// Most files share a window (vite.config.ts): each leaves it as it was, at the end of its history.
afterAll(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  cleanup();
  document.body.replaceChildren();
  history.pushState(null, '', '/');
});
