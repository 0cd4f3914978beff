declare module 'datapackage' {
  interface Resource {
    readonly name: string;
    readonly valid: boolean;
    readonly errors: readonly Error[];
    read(options: { keyed: true; relations?: boolean }): Promise<Record<string, unknown>[]>;
  }
  interface Package {
    readonly valid: boolean;
    readonly errors: readonly Error[];
    readonly resources: readonly Resource[];
  }
  export const Package: { load(path: string): Promise<Package> };
}
