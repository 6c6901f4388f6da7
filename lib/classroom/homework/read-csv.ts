/** The separator of a list: a spreadsheet copies tabs; where the comma is the decimal sign, files have semicolons. */
export function findSeparator(text: string): "\t" | ";" | "," {
  const unquoted = text.replace(/"(?:[^"]|"")*"/g, "");
  if (unquoted.includes("\t")) return "\t";
  return unquoted.includes(";") ? ";" : ",";
}

/**
 * The records of a text by RFC 4180: fields between separators, in quotes where they hold one, a break or a quote, which is
 * then doubled; lines end with CRLF, LF or CR, the last with or without. Beyond the standard, and so that nothing a person
 * pastes is lost: a quote inside an unquoted field is a letter like any other, what follows a closing quote belongs to the
 * field, and quotes that are never closed last to the end. A mark of byte order at the head is passed over.
 */
export function readCsv(text: string, separator = ","): readonly (readonly string[])[] {
  const records: string[][] = [];
  let record: string[] = [];
  let field = "";
  let quoted = false;
  let begun = false;
  const endField = () => {
    record.push(field);
    field = "";
    begun = false;
  };
  const endRecord = () => {
    endField();
    records.push(record);
    record = [];
  };
  const source = text.replace(/^\uFEFF/, "");
  for (let i = 0; i < source.length; i++) {
    const letter = source[i] as string;
    if (quoted) {
      if (letter !== '"') field += letter;
      else if (source[i + 1] === '"') {
        field += '"';
        i++;
      } else quoted = false;
    } else if (letter === '"' && !begun) {
      quoted = true;
      begun = true;
    } else if (letter === separator) endField();
    else if (letter === "\n" || letter === "\r") {
      if (letter === "\r" && source[i + 1] === "\n") i++;
      endRecord();
    } else {
      field += letter;
      begun = true;
    }
  }
  if (begun || field !== "" || record.length > 0) endRecord();
  return records;
}
