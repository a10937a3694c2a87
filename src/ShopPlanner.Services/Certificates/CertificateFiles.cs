using System.Security.Cryptography.X509Certificates;

namespace ShopPlanner.Services.Certificates;

/// <summary>The files of the certificates: PEM, for their owner alone.</summary>
internal sealed class CertificateFiles(string dataFolder)
{
    private const UnixFileMode OwnerFolder = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;
    private const UnixFileMode OwnerFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;

    public string Folder { get; } = Path.Combine(Path.GetFullPath(dataFolder), "certificate");

    public string Authority => Path.Combine(Folder, "authority.pem");

    public bool Exist => File.Exists(Authority) && File.Exists(AuthorityKey) && File.Exists(Server) && File.Exists(ServerKey);

    private string AuthorityKey => Path.Combine(Folder, "authority-key.pem");

    private string Server => Path.Combine(Folder, "server.pem");

    private string ServerKey => Path.Combine(Folder, "server-key.pem");

    public X509Certificate2 ReadAuthority() => X509Certificate2.CreateFromPemFile(Authority, AuthorityKey);

    public X509Certificate2 ReadServer()
    {
        using var read = X509Certificate2.CreateFromPemFile(Server, ServerKey);
        // Windows serves only with a key that it has taken over itself.
        return X509CertificateLoader.LoadPkcs12(read.Export(X509ContentType.Pkcs12), null);
    }

    public X509Certificate2 WriteAuthority(X509Certificate2 made)
    {
        Write(AuthorityKey, KeyOf(made));
        Write(Authority, made.ExportCertificatePem());
        return made;
    }

    public void WriteServer(X509Certificate2 made)
    {
        Write(ServerKey, KeyOf(made));
        Write(Server, made.ExportCertificatePem());
    }

    private static string KeyOf(X509Certificate2 made)
    {
        using var key = made.GetECDsaPrivateKey()!;
        return key.ExportPkcs8PrivateKeyPem();
    }

    // Beside its place first: what is there stays whole whatever happens.
    private void Write(string file, string text)
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(Folder);
        else
            Directory.CreateDirectory(Folder, OwnerFolder);
        var fresh = file + ".new";
        File.Delete(fresh);
        var options = new FileStreamOptions { Mode = FileMode.CreateNew, Access = FileAccess.Write };
        if (!OperatingSystem.IsWindows())
            options.UnixCreateMode = OwnerFile;
        using (var writer = new StreamWriter(fresh, options))
            writer.Write(text);
        File.Move(fresh, file, overwrite: true);
    }
}
