using System.Text;

namespace ShopPlanner.Drawing.Lettering;

/// <summary>Arabic letters in the form that they take beside each other: The Unicode Standard, chapter 9 (cursive joining) and
/// the block Arabic Presentation Forms-B, whose order is that of the letters.</summary>
internal static class ArabicForms
{
    private const char First = '\u0621',
        Lam = '\u0644';
    private const int Block = 0xFE80,
        LamAlef = 0xFEF5;

    // How many forms each letter from U+0621 on has in the block: alone, at the end, at the beginning, in the middle.
    private const string Forms = "122224242444442222444444440000004444444224";

    // The alefs that melt into a lam before them, in the block's order.
    private const string Alefs = "\u0622\u0623\u0625\u0627";

    /// <summary>The text with its Arabic letters joined, still in reading order.</summary>
    public static string Join(string text)
    {
        if (!text.Any(IsLetter))
            return text;
        var joined = new StringBuilder();
        for (var i = 0; i < text.Length; i++)
        {
            var before = Neighbour(text, i, -1) is { } one && FormsOf(one) == 4;
            if (
                text[i] == Lam
                && i + 1 < text.Length
                && Alefs.IndexOf(text[i + 1], StringComparison.Ordinal) is var alef and >= 0
            )
            {
                joined.Append((char)(LamAlef + (2 * alef) + (before ? 1 : 0)));
                i++;
            }
            else
                joined.Append(Form(text, i, before));
        }

        return joined.ToString();
    }

    private static char Form(string text, int i, bool before)
    {
        var forms = FormsOf(text[i]);
        if (forms == 0)
            return text[i];
        before &= forms > 1;
        var after = forms == 4 && Neighbour(text, i, 1) is { } next && FormsOf(next) > 1;
        var form = (before, after) switch
        {
            (false, false) => 0,
            (true, false) => 1,
            (false, true) => 2,
            _ => 3,
        };
        return (char)(Block + Forms[..(text[i] - First)].Sum(count => count - '0') + form);
    }

    private static int FormsOf(char letter) => letter >= First && letter < First + Forms.Length ? Forms[letter - First] - '0' : 0;

    // Vowel marks stand above and below, and do not part letters.
    private static char? Neighbour(string text, int i, int step)
    {
        i += step;
        while (i >= 0 && i < text.Length && text[i] is >= '\u064B' and <= '\u065F')
            i += step;
        return i >= 0 && i < text.Length ? text[i] : null;
    }

    private static bool IsLetter(char letter) => FormsOf(letter) > 0;
}
