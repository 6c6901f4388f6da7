/** Code pages of older files by the name in their header, as a text decoder knows them. */
const CODE_PAGES: Readonly<Record<string, string>> = {
  ANSI_874: "windows-874",
  ANSI_932: "shift_jis",
  ANSI_936: "gbk",
  ANSI_949: "euc-kr",
  ANSI_950: "big5",
  ANSI_1250: "windows-1250",
  ANSI_1251: "windows-1251",
  ANSI_1252: "windows-1252",
  ANSI_1253: "windows-1253",
  ANSI_1254: "windows-1254",
  ANSI_1255: "windows-1255",
  ANSI_1256: "windows-1256",
  ANSI_1257: "windows-1257",
  ANSI_1258: "windows-1258",
};

/** How much of a file's head is searched for the name of its code page. */
const HEAD_BYTES = 65_536;

/** The letters of a DXF file: UTF-8 where they are that, else the code page that its head names, else western letters. */
export function decodeLetters(bytes: Uint8Array, head: Uint8Array = bytes): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    const start = new TextDecoder("windows-1252").decode(head.subarray(0, HEAD_BYTES));
    const page = /ANSI_\d{3,4}/i.exec(start)?.[0].toUpperCase() ?? "ANSI_1252";
    return new TextDecoder(CODE_PAGES[page] ?? "windows-1252").decode(bytes);
  }
}

/** A name with its `\U+00E9` marks turned into the letters they stand for. */
export function plainName(name: string): string {
  return name.replace(/\\U\+([0-9A-Fa-f]{4})/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)));
}
