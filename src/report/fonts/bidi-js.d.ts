/** As Node loads the package: its own types describe another build of it. */
declare module 'bidi-js' {
  export default function bidiFactory(): {
    getEmbeddingLevels(text: string, direction: 'ltr'): { readonly levels: Uint8Array };
  };
}
