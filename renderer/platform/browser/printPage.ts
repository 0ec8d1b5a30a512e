/** Opens the browser's print dialog, which can make a PDF and takes its name from the page's title. */
export function printPage(title: string): void {
  const usual = document.title
  window.addEventListener('afterprint', () => { document.title = usual }, { once: true })
  document.title = title
  window.print()
}
