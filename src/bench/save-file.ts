/** Hands a file to the browser, to be saved among its downloads. */
export function saveFile(name: string, contents: string | Uint8Array<ArrayBuffer>, type: string): void {
  const url = URL.createObjectURL(new Blob([contents], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The download has its own hold on the data once it has begun.
  setTimeout(() => {
    URL.revokeObjectURL(url);
  }, 60_000);
}
