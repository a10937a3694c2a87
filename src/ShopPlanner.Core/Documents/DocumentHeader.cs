namespace ShopPlanner.Core.Documents;

/// <summary>The members <c>format</c> and <c>version</c> that every open document begins with.</summary>
public static class DocumentHeader
{
    /// <summary>Returns the document's version when it is of the format and of a version read here; null, with the fault noted,
    /// if not: then nothing more of it can be judged.</summary>
    /// <param name="root">The document.</param>
    /// <param name="format">The format wanted.</param>
    /// <param name="latest">The latest version that is read.</param>
    public static int? VersionOf(DocumentObject root, string format, int latest)
    {
        ArgumentNullException.ThrowIfNull(root);
        return IsFormat(root["format"], format) ? ReadVersion(root["version"], latest) : null;
    }

    private static bool IsFormat(DocumentValue value, string format)
    {
        if (value.Required($"write \"{format}\"").Text() is not { } text)
            return false;
        if (text == format)
            return true;
        value.Refuse($"is another format: use {format}");
        return false;
    }

    private static int? ReadVersion(DocumentValue value, int latest)
    {
        if (value.Required("write 1").Count(1, int.MaxValue) is not { } version)
            return null;
        if (version <= latest)
            return version;
        value.Refuse(
            latest == 1
                ? "is a later version than this program reads: it reads version 1"
                : $"is a later version than this program reads: it reads versions 1 to {latest}"
        );
        return null;
    }
}
