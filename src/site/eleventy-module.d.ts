/** The site generator has no types; this is what the adapter uses. */
declare module '@11ty/eleventy' {
  export default class Eleventy {
    constructor(input: string, output: string, options: object);
    disableLogger?(): void;
    toJSON(): Promise<{ outputPath: string | false; url: string; content: string }[]>;
  }
}
