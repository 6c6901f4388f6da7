import type { Lettering } from "../display-list";

/** The faces that lettering is set in. */
export type FaceName = "drafting" | NonNullable<Lettering["face"]>;

/** Height of a capital over the size of the type: by the faces' own tables. */
export const CAP_HEIGHT: Readonly<Record<FaceName, number>> = { drafting: 675 / 1024, plain: 0.7, strong: 0.7 };

/** Advance widths of the characters from space to tilde, thousandths of the size of the type: by the faces' own tables. */
const WIDTHS: Readonly<Record<FaceName, readonly number[]>> = {
  drafting: [
    400, 135, 236, 638, 557, 519, 670, 162, 298, 352, 508, 524, 178, 311, 141, 455, 631, 128, 572, 509, 681, 708, 627,
    615, 648, 569, 167, 124, 476, 492, 472, 506, 1043, 641, 711, 708, 648, 592, 692, 692, 605, 151, 529, 605, 692, 827,
    627, 670, 638, 713, 713, 643, 623, 562, 627, 940, 600, 534, 784, 425, 502, 541, 307, 687, 172, 509, 562, 633, 513,
    541, 594, 516, 495, 151, 178, 614, 157, 778, 500, 563, 557, 514, 552, 502, 404, 508, 519, 809, 471, 549, 495, 353,
    146, 479, 444,
  ],
  plain: [
    275, 232, 314, 635, 576, 809, 665, 166, 372, 372, 453, 555, 256, 421, 232, 401, 629, 469, 549, 575, 614, 571, 607,
    513, 597, 604, 232, 289, 581, 578, 581, 462, 920, 590, 599, 604, 624, 547, 504, 627, 655, 242, 489, 593, 500, 823,
    657, 678, 570, 672, 620, 576, 536, 658, 573, 827, 590, 538, 556, 323, 394, 323, 446, 508, 243, 530, 569, 504, 568,
    530, 293, 570, 556, 221, 230, 505, 221, 876, 560, 552, 567, 567, 356, 475, 359, 559, 496, 699, 484, 488, 466, 367,
    199, 367, 603,
  ],
  strong: [
    275, 264, 364, 648, 582, 824, 694, 197, 400, 400, 464, 567, 280, 426, 264, 422, 655, 503, 580, 586, 635, 582, 612,
    544, 608, 615, 264, 317, 584, 581, 584, 487, 952, 612, 629, 622, 656, 570, 531, 664, 690, 279, 514, 618, 529, 851,
    683, 710, 591, 730, 646, 582, 572, 687, 600, 829, 605, 556, 578, 344, 420, 344, 452, 546, 261, 560, 596, 521, 595,
    552, 359, 600, 588, 256, 269, 538, 256, 905, 590, 574, 594, 594, 389, 494, 405, 590, 512, 747, 504, 533, 489, 394,
    235, 394, 633,
  ],
};
/** Of a character outside the table: a wide one, so that a line never runs over. */
const OTHER = 700;
const FIRST = 32;

/** How wide a text of a letter height is in a face, millimetres, kerning aside. */
export function letteredWidthMm(text: string, heightMm: number, face: FaceName = "drafting"): number {
  let thousandths = 0;
  for (const letter of text) thousandths += WIDTHS[face][(letter.codePointAt(0) ?? 0) - FIRST] ?? OTHER;
  return (thousandths / 1000) * (heightMm / CAP_HEIGHT[face]);
}
