import { state } from "lit/decorators.js";
import { pageState } from "../store/pageState";
import { preferences } from "../store/preferences";
import { StoreController } from "../store/storeController";
import { darkPalette, lightPalette, type Palette } from "../style/palette";
import type { UnitPreferences } from "../units/units";
import { LightElement } from "./lightElement";

/** A part of a view that draws its plots for paper. */
export interface PictureMaker extends Element {
  preparePictures(): Promise<void>;
}

/**
 * A view's element: it alone knows the stores, hands to the components inside what they show, and answers their events.
 * The page prints what it lays out under `@media print`; masthead, footer and the other views are not printed.
 */
export abstract class ViewElement extends LightElement {
  readonly #units = new StoreController(this, preferences, (value) => value.units);
  readonly #isDark = new StoreController(this, pageState, (value) => value.isDark);
  /** The day of the last print; empty before. */
  @state() protected printedOn = "";

  protected get units(): UnitPreferences {
    return this.#units.value;
  }

  protected get palette(): Palette {
    return this.#isDark.value ? darkPalette : lightPalette;
  }

  /** The part that has plots to be printed. */
  protected abstract get pictureMaker(): PictureMaker | null;

  /** Prints the view's report: makes its pictures, waits until they are drawn, and opens the print dialog. */
  async printReport(): Promise<void> {
    this.printedOn = new Date().toLocaleDateString();
    await this.pictureMaker?.preparePictures();
    await this.updateComplete;
    window.print();
  }
}
