/** Path of an arrow into a tray, in a square of 16: hand something to the reader as a file. */
export const SAVE_ICON = "M8 1.5v8.5M4.5 7L8 10.5L11.5 7M2 11v3.5h12V11";
