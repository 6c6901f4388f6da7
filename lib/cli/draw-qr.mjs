/** Clear modules around a code, which scanners look for (ISO/IEC 18004 asks for four). */
const QUIET_MODULES = 4;

const BLACK_ON_WHITE = "\u001b[38;5;16m\u001b[48;5;231m";
const USUAL_COLOURS = "\u001b[0m";

/** One character shows two modules, one above the other. */
const HALVES = /** @type {const} */ ({ "00": " ", 10: "▀", "01": "▄", 11: "█" });

/**
 * Draws a text as a QR code for a terminal, dark on light whatever the terminal's own colours are.
 *
 * @param {string} text
 * @param {{ coloured: boolean }} how without colours the drawing is right on a light ground only
 * @returns {Promise<string>} lines, two modules high each, with the quiet zone
 */
export async function drawQr(text, { coloured }) {
  const { default: qrcode } = await import("qrcode");
  const { modules } = qrcode.create(text, { errorCorrectionLevel: "low" });
  const isDark = (/** @type {number} */ row, /** @type {number} */ column) => {
    const inside = row >= 0 && column >= 0 && row < modules.size && column < modules.size;
    return inside && modules.get(row, column) ? 1 : 0;
  };
  const lines = [];
  for (let row = -QUIET_MODULES; row < modules.size + QUIET_MODULES; row += 2) {
    let line = "";
    for (let column = -QUIET_MODULES; column < modules.size + QUIET_MODULES; column += 1) {
      line += HALVES[`${isDark(row, column)}${isDark(row + 1, column)}`];
    }
    lines.push(coloured ? `${BLACK_ON_WHITE}${line}${USUAL_COLOURS}` : line);
  }
  return lines.join("\n");
}
