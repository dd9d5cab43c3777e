import type { Font } from 'fontkit';

// pdfkit takes a font that fontkit has opened; its types know only names and bytes.
declare global {
  namespace PDFKit.Mixins {
    interface PDFFont {
      registerFont(name: string, font: Font): this;
    }
  }
}
