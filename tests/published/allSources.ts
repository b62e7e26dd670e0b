import { achenbach1968, curveLabelledAchenbach } from "./achenbach-1968";
import { achenbach1971 } from "./achenbach-1971";
import { achenbach1977 } from "./achenbach-1977";
import { achenbachHeinecke1981 } from "./achenbach-heinecke-1981";
import { bearman1969 } from "./bearman-1969";
import { blevins1984 } from "./blevins-1984";
import { cantwellColes1983 } from "./cantwell-coles-1983";
import { cirsoc102 } from "./cirsoc-102";
import { delanySorensen1953 } from "./delany-sorensen-1953";
import { dnvRpC205 } from "./dnv-rp-c205";
import { en199114 } from "./en-1991-1-4";
import { flachsbart1932 } from "./flachsbart-1932";
import { hiemenz1911 } from "./hiemenz-1911";
import { howarth1938 } from "./howarth-1938";
import { jancauskas1983 } from "./jancauskas-1983";
import { jiang2020 } from "./jiang-2020";
import { millsHang1983 } from "./mills-hang-1983";
import { munsonDragFigures } from "./munson-drag-figures";
import { norberg1994, norberg2003 } from "./norberg";
import { parkinsonJandali1970 } from "./parkinson-jandali-1970";
import { prandtlSchlichting1934 } from "./prandtl-schlichting-1934";
import type { PublishedSource } from "./publishedValue";
import { bearmanObasaju1982, bearmanTrueman1972, fageJohansen1927, nakaguchi1968 } from "./rectangles-measured";
import { roshko1961 } from "./roshko-1961";
import { schewe1983 } from "./schewe-1983";
import { schultzGrunow1940 } from "./schultz-grunow-1940";
import { shih1993 } from "./shih-1993";
import { dataBook2002, hoerner1965, kritzinger2004, mckinney1960, zdravkovich1989 } from "./short-cylinders";
import { jorgensen1973, rodriguez2015 } from "./smooth-cylinder-summaries";
import { standardAtmosphere1976 } from "./standard-atmosphere-1976";
import { terrill1960 } from "./terrill-1960";
import { trippedEllipse2020 } from "./tripped-ellipse-2020";
import { bearman1968, cheungMelbourne1983, dryden1937 } from "./turbulence-effect";
import { haar1984, iapws2008, kell1975, korson1969 } from "./water";
import { pottsCrowther2002, raymerLandingGear } from "./wheels-and-discs";
import { whiteDragTables } from "./white-drag-tables";
import { wieselsberger1921 } from "./wieselsberger-1921";
import { wieselsberger1922 } from "./wieselsberger-1922";

/** Every source that the accuracy table runs over. */
export const allSources: readonly PublishedSource[] = [
  achenbach1968,
  achenbach1971,
  achenbach1977,
  achenbachHeinecke1981,
  bearman1968,
  bearman1969,
  bearmanObasaju1982,
  bearmanTrueman1972,
  blevins1984,
  cantwellColes1983,
  cheungMelbourne1983,
  cirsoc102,
  curveLabelledAchenbach,
  dataBook2002,
  delanySorensen1953,
  dnvRpC205,
  dryden1937,
  en199114,
  fageJohansen1927,
  flachsbart1932,
  haar1984,
  hiemenz1911,
  hoerner1965,
  howarth1938,
  iapws2008,
  jancauskas1983,
  jiang2020,
  jorgensen1973,
  kell1975,
  korson1969,
  kritzinger2004,
  mckinney1960,
  millsHang1983,
  munsonDragFigures,
  nakaguchi1968,
  norberg1994,
  norberg2003,
  parkinsonJandali1970,
  pottsCrowther2002,
  prandtlSchlichting1934,
  raymerLandingGear,
  rodriguez2015,
  roshko1961,
  schewe1983,
  schultzGrunow1940,
  shih1993,
  standardAtmosphere1976,
  terrill1960,
  trippedEllipse2020,
  whiteDragTables,
  wieselsberger1921,
  wieselsberger1922,
  zdravkovich1989,
];
