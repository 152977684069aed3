/** Made at build from the packages themselves (.ci/licences.mjs). */
declare module 'virtual:licences' {
  export const PARTS: readonly {
    name: string;
    version: string;
    licence: string;
    /** Empty where the package brings none. */
    text: string;
  }[];
}
