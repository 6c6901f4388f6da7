/** What is said wherever a drawing might be taken for more than it is. */
export const CAUTION = "A teaching sketch is not a construction drawing: local codes and licensed practice decide.";
