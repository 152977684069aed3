/** A style sheet as text, for a part that is fetched later. */
declare module '*.css?inline' {
  const css: string;
  export default css;
}
