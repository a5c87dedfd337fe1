/** Hands a text over as a file of the device. */
export function saveFile(name: string, text: string, type: string): void {
  const address = URL.createObjectURL(fileOf(name, text, type));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Whether this device can pass files on to another of its programs. */
export function canShare(files: readonly File[]): boolean {
  return navigator.canShare?.({ files: [...files] }) ?? false;
}

export function shareFiles(files: readonly File[]): void {
  // Who changes his mind has not failed.
  navigator.share({ files: [...files] }).catch(() => {});
}

export function fileOf(name: string, text: string, type: string): File {
  return new File([text], name, { type });
}
