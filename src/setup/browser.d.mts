/** Path of a Chromium-family browser, or null. */
export declare const findBrowser: () => string | null;
/** Arguments every browser test starts Chromium with. */
export declare const browserArgs: string[];
