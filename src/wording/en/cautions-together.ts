interface FilesRead {
  readonly files: readonly string[];
  readonly firstRows: readonly number[];
}

/** What is told of several files that were read as one; at the drill none are. */
export const cautionsTogether = {
  "files-read-together": (f: FilesRead) =>
    `The catches come from ${f.files.length} files, and rows are counted through them: ${f.files.map((file, i) => `${file} from row ${f.firstRows[i]}`).join(", ")}.`,
};
