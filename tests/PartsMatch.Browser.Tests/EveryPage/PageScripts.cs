namespace PartsMatch.Browser.Tests.EveryPage;

/// <summary>What a page is asked from inside.</summary>
internal static class PageScripts
{
    public const string HeadingLevels = "() => [...document.querySelectorAll('h1, h2, h3, h4, h5, h6')].map(one => Number(one.tagName[1]))";

    /// <summary>Of the page and all that it asked for, as they came over the wire, packed (Resource Timing, W3C).</summary>
    public const string Weights = """
        () => [...performance.getEntriesByType('navigation'), ...performance.getEntriesByType('resource')]
          .map(one => ({ path: new URL(one.name).pathname, bytes: one.encodedBodySize }))
        """;

    public const string Unlabelled = """
        () => [...document.querySelectorAll('input:not([type=hidden]), select, textarea')]
          .filter(one => ![...one.labels].some(label => label.checkVisibility() && label.innerText.trim() !== ''))
          .map(one => one.outerHTML.slice(0, 120))
        """;

    public const string WrongIds = """
        () => {
          const ids = [...document.querySelectorAll('[id]')].map(one => one.id);
          const twice = ids.filter((id, at) => ids.indexOf(id) !== at);
          const referred = [...document.querySelectorAll('[aria-describedby], [aria-labelledby], label[for], a[href^="#"]')]
            .flatMap(one => [one.getAttribute('aria-describedby'), one.getAttribute('aria-labelledby'), one.getAttribute('for'), one.getAttribute('href')?.startsWith('#') ? decodeURIComponent(one.getAttribute('href').slice(1)) : null])
            .flatMap(names => names?.split(' ') ?? [])
            .filter(id => id !== '' && !ids.includes(id));
          return [...twice.map(id => `twice: ${id}`), ...referred.map(id => `not there: ${id}`)];
        }
        """;

    /// <summary>Under 44 by 44 CSS pixels (WCAG 2.2, 2.5.5).</summary>
    /// <remarks>Exempt, as there: a link inside a running sentence, whose size is the line's. A check box or radio button is tapped on its label. What stands outside the window until it has the focus (the skip link) is measured when it has it, by <see cref="Journeys.KeyboardTests"/>.</remarks>
    public const string TooSmall = """
        () => {
          const isInSentence = link => {
            if (link.tagName !== 'A' || getComputedStyle(link).display !== 'inline') return false;
            const around = link.closest('p, li, dd, td, label');
            return around !== null && around.textContent.trim().length > link.textContent.trim().length;
          };
          const target = one => one.matches('input[type=checkbox], input[type=radio]') ? one.closest('label') ?? one : one;
          return [...document.querySelectorAll('a, button, input:not([type=hidden]), select, textarea, summary')]
            .filter(one => one.checkVisibility() && !isInSentence(one))
            .map(one => ({ one, box: target(one).getBoundingClientRect() }))
            .filter(({ box }) => box.right > 0 && (box.width < 43.99 || box.height < 43.99))
            .map(({ one, box }) => `${one.outerHTML.slice(0, 120)} is ${box.width.toFixed(1)} x ${box.height.toFixed(1)}`);
        }
        """;

    /// <summary>What scrolls by itself, as a drawing does, may be wider inside.</summary>
    public const string SticksOut = """
        () => {
          const width = document.documentElement.clientWidth;
          if (document.documentElement.scrollWidth <= width) return [];
          return [`the page is ${document.documentElement.scrollWidth} wide`, ...[...document.querySelectorAll('body *')]
            .filter(one => one.getBoundingClientRect().right > width + .5)
            .map(one => one.outerHTML.slice(0, 100))];
        }
        """;
}
