/** The functions taken from jstat, which ships no types. Checked against jstat 1.9.6. */
declare module 'jstat' {
  const jStat: {
    /** Natural logarithm of the gamma function, x > 0. */
    gammaln(x: number): number;
    /** x at which the regularised incomplete beta function I_x(a, b) is p; right to about 7 digits. */
    ibetainv(p: number, a: number, b: number): number;
    tukey: {
      /** Probability of a studentised range of `means` means below q on df >= 2 degrees of freedom. */
      cdf(q: number, means: number, df: number): number;
    };
  };
  export default jStat;
}
