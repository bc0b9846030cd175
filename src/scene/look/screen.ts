/**
 * Tells when an element has other pixels: its size has changed, or the screen's, because the window was moved to another or zoomed.
 * Gives back how to stop.
 */
export const watchPixels = (element: HTMLElement, changed: () => void): (() => void) => {
  const watch = new ResizeObserver(changed);
  let query: MediaQueryList | null = null;
  // Where device pixels cannot be watched, the screen's resolution is asked after.
  const again = (): void => {
    query?.removeEventListener('change', again);
    query = window.matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    query.addEventListener('change', again);
    changed();
  };
  try {
    watch.observe(element, { box: 'device-pixel-content-box' });
  } catch {
    watch.observe(element);
    again();
  }
  return () => {
    watch.disconnect();
    query?.removeEventListener('change', again);
  };
};
