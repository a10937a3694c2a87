namespace ShopPlanner.Services.Storage.Documents;

/// <summary>A document in the database that this program cannot read. It is kept as it is; a program that can read it still
/// may.</summary>
public sealed class StoredDocumentException : Exception
{
    /// <summary>Names the document and what is wrong with it.</summary>
    /// <param name="format">The document's format.</param>
    /// <param name="problem">What is wrong, reading on from the name: <c>is damaged: …</c></param>
    /// <param name="cause">What found it; null where this program's own rules did.</param>
    public StoredDocumentException(string format, string problem, Exception? cause = null)
        : base($"A stored document ({format}) {problem}. It was not changed.", cause) { }
}
