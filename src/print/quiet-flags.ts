/** What keeps a Chromium without a window from calling home and from drawing on a graphics card. */
export const QUIET_FLAGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
] as const;
