// The look of the printed sheet. Black on white, no fills needed, at least 9 pt.

#include "sheet/worksheet.h"

namespace treadle::sheet {

std::string worksheet_style() {
    return R"css(@page { margin: 13mm 12mm 16mm 12mm;
  @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 9pt B612, Helvetica, Arial, sans-serif; } }
@page letter { size: 8.5in 11in; }
@page a4 { size: 210mm 297mm; }
body.letter { page: letter; }
body.a4 { page: a4; }
@page full-letter { size: 8.5in 11in; margin: 10mm; @bottom-right { content: none; } }
@page full-a4 { size: 210mm 297mm; margin: 10mm; @bottom-right { content: none; } }
body.full-letter { page: full-letter; }
body.full-a4 { page: full-a4; }
* { box-sizing: border-box; }
body { margin: 0 auto; max-width: 186mm; color: #000; background: #fff;
  font: 10pt/1.35 B612, Helvetica, Arial, sans-serif; font-variant-numeric: tabular-nums;
  overflow-wrap: anywhere; }
h1 { font-size: 20pt; margin: 0 0 1mm; }
h2 { font-size: 14pt; margin: 7mm 0 2mm; border-bottom: 0.6mm solid #000; break-after: avoid; }
h3 { font-size: 11.5pt; margin: 0 0 1.5mm; break-after: avoid; }
p { margin: 0 0 2mm; break-inside: avoid; }
ul { margin: 0 0 2mm; padding-left: 5mm; }
.running { display: none; }
.invented { border: 0.4mm dashed #000; padding: 1mm 2mm; font-weight: bold; }
.safety { border: 0.8mm solid #000; padding: 2mm 3mm; font-weight: bold; }
.facts { display: flex; flex-wrap: wrap; gap: 1mm 6mm; margin: 0 0 2mm; }
.facts div { display: flex; gap: 1.5mm; }
.facts dt::after { content: ":"; }
.facts dd { margin: 0; font-weight: bold; }
table { width: 100%; border-collapse: collapse; margin: 0 0 3mm; }
caption { text-align: left; font-size: 9pt; padding: 0 0 0.5mm; break-after: avoid; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
tbody tr:first-child { break-before: avoid; }
th, td { text-align: left; vertical-align: top; padding: 0.8mm 1.5mm 0.8mm 0;
  border-bottom: 0.25mm solid #000; }
thead th { font-size: 9pt; font-weight: normal; border-bottom-width: 0.5mm; overflow-wrap: normal; }
tbody th { font-weight: bold; }
th[scope="row"] { overflow-wrap: normal; }
.verdict { white-space: nowrap; }
li .verdict { white-space: normal; }
.summary td:nth-child(7), .ops td:nth-child(4) { width: 40mm; padding-right: 3mm; }
.summary td:last-child, .ops td:last-child { width: 31mm; }
.ops th:first-child { width: 9mm; }
.ops td:nth-child(3) { width: 60mm; }
.summary td:nth-child(3) { width: 44mm; }
.figure { text-align: right; padding-right: 3mm; white-space: nowrap; }
.small, .anchor { font-size: 9pt; }
.anchor::before { content: "["; }
.anchor::after { content: "]"; }
.code { float: right; width: min-content; margin: -2mm -2mm 0 3mm; }
.code svg { display: block; max-width: none; }
.code figcaption { padding: 0 2mm; }
main { clear: both; }
.verdict svg { vertical-align: -1pt; }
.tick { display: inline-block; width: 4mm; height: 4mm; border: 0.4mm solid #000;
  margin-right: 2mm; vertical-align: -0.6mm; }
.ticks { list-style: none; padding: 0; }
.ticks li { margin-bottom: 1mm; }
.setup { margin: 0 0 5mm; padding: 2mm 0 0; border-top: 0.25mm solid #000; }
.setup h3, .setup .ticks { break-inside: avoid; break-after: avoid; }
.steps td:first-child, .steps thead th:first-child { width: 11mm; }
.steps .set { font-size: 14pt; line-height: 1.25; }
.steps .figure { font-size: 12pt; }
.steps .batch { white-space: normal; max-width: 26mm; }
.bars th:first-child { width: 24mm; }
.bars td:last-child { width: 26mm; }
.first { break-before: avoid; }
.stock > p, .stock > .ticks { break-after: avoid; }
.checks th:first-child { width: 22mm; }
.checks td:last-child { width: 22mm; }
.measure { display: inline-block; white-space: nowrap; margin-right: 5mm; }
.measure .blank { width: 20mm; margin-left: 2mm; }
.blank.short { width: 18mm; }
.cautions.small li { margin-bottom: 0.5mm; }
.scrap { break-before: avoid; }
input.tick { appearance: none; border-radius: 0; padding: 0; background: #fff; cursor: pointer; }
input.tick:checked { background: #000; box-shadow: inset 0 0 0 0.6mm #fff; }
span.tick { font: bold 9pt/1 B612, Helvetica, Arial, sans-serif; text-align: center; }
.blank { display: inline-block; width: 34mm; border-bottom: 0.3mm solid #000; height: 5mm; }
.parts { break-before: page; }
.part { break-inside: avoid; margin: 0 0 6mm; padding: 2mm 0 0; border-top: 0.25mm solid #000; }
.keep { break-inside: avoid; }
.drawings { display: flex; flex-wrap: wrap; gap: 2mm; align-items: flex-end; }
figure { margin: 0 0 2mm; }
figcaption { font-size: 9pt; }
svg { max-width: 100%; }
.formula { font-weight: bold; }
.workings { break-before: page; }
.workings table { font-size: 9pt; table-layout: fixed; }
.workings th { font-weight: normal; }
.workings thead th { width: 16%; }
.workings thead th:nth-child(2) { width: 31%; }
.workings thead th:nth-child(3) { width: 13%; }
.workings thead th:nth-child(4) { width: 24%; }
@media print {
  body { max-width: none; }
  body { display: table; width: 100%; }
  .sheet { display: table-row-group; }
  .running { display: table-footer-group; break-inside: avoid; font-size: 9pt; }
}
body.full { max-width: none; line-height: 0; }
.tile { break-after: page; break-inside: avoid; }
.tile:last-child { break-after: auto; }
.tile svg { display: block; max-width: none; }
@media print { body.full { display: block; width: auto; } }
@media screen { body { padding: 6mm; max-width: 200mm; }
  input.tick { width: 11mm; height: 11mm; margin: 1mm 3mm 1mm 0; vertical-align: -3mm; } }
)css";
}

} // namespace treadle::sheet
