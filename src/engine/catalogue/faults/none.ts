/** What most fault kinds leave out. */
export const none = {
  benign: false,
  signs: [],
  opens: [],
  leaks: [],
  values: {},
  mechanisms: [],
  controls: [],
  tempting: [],
} as const;
