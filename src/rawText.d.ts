/** A file bundled as its text. */
declare module '*?raw' {
  const text: string
  export default text
}

/** A font bundled as an address that holds it. */
declare module '*.woff2?inline' {
  const address: string
  export default address
}
