package dev.kettlemark.sheets;

/** What the look of a page needs besides that of a sheet. */
final class PageStyle {

  private static final String TEXT = """

      .skip { position: absolute; left: -999rem; }
      .skip:focus { position: static; display: inline-block; padding: .3rem .6rem; background: var(--ink); color: var(--paper); }
      .ways { font-size: .85rem; margin-bottom: .8rem; }
      .ways ul { list-style: none; display: flex; flex-wrap: wrap; gap: .1rem 1.1rem; margin: 0; padding: 0; }
      a { color: #6b3410; text-underline-offset: .15em; }
      a:focus-visible, input:focus-visible { outline: 3px solid #6b3410; outline-offset: 2px; }
      .mark { display: inline-block; margin: .5rem 0 0; padding: .1rem .5rem; border: 2px solid var(--warn); color: var(--warn); font-weight: 600; }
      body[data-mark] { isolation: isolate; }
      body[data-mark]::before { content: attr(data-mark); position: fixed; left: 0; right: 0; top: 38%; z-index: -1; text-align: center;
        font-size: 9rem; line-height: 1; font-weight: 600; color: #f3e2da; transform: rotate(-24deg); overflow: hidden; pointer-events: none; }
      .leaf { max-width: 60rem; }
      .leaf #verdict, .leaf #answer { border-left: 4px solid var(--ink); padding-left: .9rem; break-inside: avoid; }
      .leaf #verdict h2, .leaf #answer h2 { border-top: 0; }
      .leaf #answer .lines p:first-child { font-size: 1.15rem; font-weight: 600; }
      #verdict td em { white-space: nowrap; }
      .unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
      #search label { display: block; font-size: .85rem; color: var(--soft); }
      #search input { font: inherit; width: 100%; max-width: 30rem; padding: .3rem .5rem; border: 1px solid var(--soft); background: #fff; color: inherit; }
      #found { font-size: .85rem; color: var(--soft); }
      .items { font-size: .9rem; }
      .items th, .items td { overflow-wrap: break-word; }
      @media screen and (min-width: 56.01rem) {
        .items { table-layout: fixed; }
        .items th:nth-child(1) { width: 20%; }
        .items th:nth-child(2) { width: 7.5%; }
        .items th:nth-child(3) { width: 6.5%; }
        .items th:nth-child(4) { width: 9.5%; }
        .items th:nth-child(5) { width: 14.5%; }
        .items th:nth-child(6) { width: 14%; }
        .items th:nth-child(7) { width: 9.5%; }
      }
      .items ul { list-style: none; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: 0 .7rem; }
      .items td:nth-child(4) { white-space: nowrap; }
      .items .mark { margin: 0 0 0 .5rem; font-size: .8rem; border-width: 1px; }
      .half { max-width: 40rem; }
      .half h1 { font-size: 1.35rem; }
      .half h2 { margin-top: .9rem; }
      @media screen and (max-width: 48rem) { .leaf table { font-size: .85rem; } .leaf td.figure { white-space: normal; } .leaf data { white-space: normal; } }
      @media screen and (max-width: 56rem) {
        .items thead { display: none; }
        .items, .items tbody { display: block; }
        .items tr:not([hidden]) { display: flex; flex-wrap: wrap; gap: .1rem 1.2rem; padding: .5rem 0; border-bottom: 1px solid var(--hair); }
        .items th, .items td { border: 0; padding: 0; white-space: normal; }
        .items tbody th { flex: 1 0 100%; font-size: 1.05rem; }
        .items td:empty { display: none; }
        .items td[data-column]::before { content: attr(data-column) ": "; color: var(--soft); }
        .items td:last-child { flex: 1 0 100%; }
        .items li { padding: .15rem 0; }
      }
      @media screen and (max-width: 36rem) {
        .beside :is(table, caption, thead, tbody) { display: block; }
        .beside tr { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); border-bottom: 1px solid var(--hair); padding: .15rem 0; }
        .beside thead tr { border-bottom-color: var(--ink); }
        .beside tr > :is(th, td) { border: 0; padding: 0 .35rem 0 0; text-align: left; overflow-wrap: break-word; }
        .beside tr > :first-child { grid-column: 1 / -1; }
        .beside tbody tr > :first-child { font-weight: 600; }
        .beside #verdict tr { grid-template-columns: 1fr auto; }
        .beside #verdict tr > :first-child { grid-column: 1; }
        .beside #verdict tr > :nth-child(3) { grid-column: 1 / -1; }
        .beside #amounts tr > :nth-child(2) { grid-column: 1 / -1; font-style: italic; }
        .beside #amounts tr > :is(:nth-child(3), :nth-child(4)) { grid-column: 1; }
        .beside #amounts tr > :is(:nth-child(5), :nth-child(6)) { grid-column: 2; }
        .beside #amounts tr > :is(:nth-child(3), :nth-child(5)) { grid-row: 3; }
        .beside #amounts tr > :nth-child(7) { grid-column: 3; grid-row: 3 / 5; }
      }
      @media print { tbody tr:first-child { break-before: avoid; } #search { display: none; } .ways ul, .skip { display: none; } a { color: inherit; text-decoration: none; } .items td:nth-child(2) { white-space: nowrap; } .items th:last-child:not([scope="row"]), .items td:last-child { display: none; } }
      """;

  private PageStyle() {}

  static String text() {
    return TEXT;
  }
}
