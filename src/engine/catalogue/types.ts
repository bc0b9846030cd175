/**
 * What a kind is, shows, withstands and is called. Entries are plain data plus the few handlers that only they need;
 * nobody outside this folder asks what kind a part is: it asks the kind for the property.
 */
export * from './commonTypes.ts';
export type * from './componentTypes.ts';
export type * from './faultTypes.ts';
export * from './workTypes.ts';
