export { type PdfWishes, pdfOf, pdfOfOutline } from './pdf.ts'
