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

/** What every look-alike says of itself. */
export const benign = { ...none, benign: true, severity: 'minor', harm: '', source: 'common practice' } as const;
