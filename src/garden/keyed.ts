/** A record with the key other parts of the book name it by, for instance `fruits/2025/F12`. */
export type Keyed<T> = T & { readonly key: string };
