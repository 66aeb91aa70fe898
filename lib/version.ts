/** Version of the library and its methods, printed on every record; the same as the package's. */
export const VERSION = "0.1.0";
