/** The version of what grades: the package's own, kept with every grade. */
export const ENGINE_VERSION = "0.1.0";
