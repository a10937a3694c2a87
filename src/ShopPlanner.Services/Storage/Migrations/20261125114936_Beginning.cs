using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopPlanner.Services.Storage.Migrations
{
    /// <inheritdoc />
    public partial class Beginning : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            // The letters ShPl: another program's database in this place is told from a shop's by them.
            migrationBuilder.Sql("PRAGMA application_id = 0x5368506C");

            migrationBuilder.CreateTable(
                name: "Commands",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Asked = table.Column<string>(type: "TEXT", nullable: false),
                    WhenUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Commands", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Counters",
                columns: table => new
                {
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Last = table.Column<long>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Counters", x => x.Name);
                }
            );

            migrationBuilder.CreateTable(
                name: "Facts",
                columns: table => new
                {
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Value = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Facts", x => x.Name);
                }
            );

            migrationBuilder.CreateTable(
                name: "Materials",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    NameKey = table.Column<string>(type: "TEXT", nullable: false),
                    Form = table.Column<int>(type: "INTEGER", nullable: false),
                    Thickness = table.Column<long>(type: "INTEGER", nullable: false),
                    Width = table.Column<long>(type: "INTEGER", nullable: true),
                    Tint = table.Column<string>(type: "TEXT", nullable: false),
                    Source = table.Column<string>(type: "TEXT", nullable: false),
                    Own = table.Column<bool>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Materials", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "PlanJobs",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<long>(type: "INTEGER", nullable: false),
                    State = table.Column<int>(type: "INTEGER", nullable: false),
                    OrderJson = table.Column<string>(type: "TEXT", nullable: false),
                    Seconds = table.Column<int>(type: "INTEGER", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: true),
                    FaultsJson = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PlanJobs", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Plans",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<long>(type: "INTEGER", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    MadeUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    State = table.Column<int>(type: "INTEGER", nullable: false),
                    Status = table.Column<int>(type: "INTEGER", nullable: false),
                    Cost = table.Column<long>(type: "INTEGER", nullable: false),
                    Stocks = table.Column<int>(type: "INTEGER", nullable: false),
                    OrderJson = table.Column<string>(type: "TEXT", nullable: false),
                    RequestJson = table.Column<string>(type: "TEXT", nullable: false),
                    PlanJson = table.Column<string>(type: "TEXT", nullable: false),
                    NamesJson = table.Column<string>(type: "TEXT", nullable: false),
                    RequestHash = table.Column<string>(type: "TEXT", nullable: false),
                    PlannerVersion = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Plans", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Projects",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Code = table.Column<string>(type: "TEXT", nullable: false),
                    Unit = table.Column<int>(type: "INTEGER", nullable: false),
                    State = table.Column<int>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Number = table.Column<long>(type: "INTEGER", nullable: false),
                    MadeUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Projects", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Shop",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false),
                    Unit = table.Column<int>(type: "INTEGER", nullable: false),
                    Kerf = table.Column<string>(type: "TEXT", nullable: false),
                    BoardEndTrim = table.Column<string>(type: "TEXT", nullable: false),
                    SheetEdgeTrim = table.Column<string>(type: "TEXT", nullable: false),
                    KeepBoardLength = table.Column<string>(type: "TEXT", nullable: false),
                    KeepSheetLength = table.Column<string>(type: "TEXT", nullable: false),
                    KeepSheetWidth = table.Column<string>(type: "TEXT", nullable: false),
                    Paper = table.Column<int>(type: "INTEGER", nullable: false),
                    CurrencySign = table.Column<string>(type: "TEXT", nullable: false),
                    PlanSeconds = table.Column<int>(type: "INTEGER", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Shop", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Stores",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    NameKey = table.Column<string>(type: "TEXT", nullable: false),
                    Unit = table.Column<int>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Stores", x => x.Id);
                }
            );

            migrationBuilder.CreateTable(
                name: "Pieces",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Tag = table.Column<string>(type: "TEXT", nullable: false),
                    Place = table.Column<int>(type: "INTEGER", nullable: false),
                    MaterialId = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Pieces", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Pieces_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "CutTicks",
                columns: table => new
                {
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Layout = table.Column<int>(type: "INTEGER", nullable: false),
                    Copy = table.Column<int>(type: "INTEGER", nullable: false),
                    Cut = table.Column<int>(type: "INTEGER", nullable: false),
                    Made = table.Column<bool>(type: "INTEGER", nullable: false),
                    WhenUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey(
                        "PK_CutTicks",
                        x => new
                        {
                            x.PlanId,
                            x.Layout,
                            x.Copy,
                            x.Cut,
                        }
                    );
                    table.ForeignKey(
                        name: "FK_CutTicks_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "Finishes",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Layout = table.Column<int>(type: "INTEGER", nullable: false),
                    Copy = table.Column<int>(type: "INTEGER", nullable: false),
                    Standing = table.Column<bool>(type: "INTEGER", nullable: false),
                    WhenUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Finishes", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Finishes_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "PartSteps",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ProjectId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<long>(type: "INTEGER", nullable: false),
                    Title = table.Column<string>(type: "TEXT", nullable: false),
                    Before = table.Column<string>(type: "TEXT", nullable: false),
                    After = table.Column<string>(type: "TEXT", nullable: false),
                    Undone = table.Column<bool>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PartSteps", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PartSteps_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "Parts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ProjectId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Position = table.Column<long>(type: "INTEGER", nullable: false),
                    Mark = table.Column<string>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Material = table.Column<string>(type: "TEXT", nullable: false),
                    Length = table.Column<string>(type: "TEXT", nullable: false),
                    Width = table.Column<string>(type: "TEXT", nullable: false),
                    Quantity = table.Column<string>(type: "TEXT", nullable: false),
                    CanTurn = table.Column<bool>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Parts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Parts_Projects_ProjectId",
                        column: x => x.ProjectId,
                        principalTable: "Projects",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "Prices",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    StoreId = table.Column<Guid>(type: "TEXT", nullable: false),
                    MaterialId = table.Column<string>(type: "TEXT", nullable: false),
                    Length = table.Column<long>(type: "INTEGER", nullable: false),
                    Width = table.Column<long>(type: "INTEGER", nullable: false),
                    Price = table.Column<long>(type: "INTEGER", nullable: false),
                    InStock = table.Column<bool>(type: "INTEGER", nullable: false),
                    Seen = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Prices", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Prices_Materials_MaterialId",
                        column: x => x.MaterialId,
                        principalTable: "Materials",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_Prices_Stores_StoreId",
                        column: x => x.StoreId,
                        principalTable: "Stores",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "Promises",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PieceId = table.Column<Guid>(type: "TEXT", nullable: false),
                    PlanId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Active = table.Column<bool>(type: "INTEGER", nullable: false),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Promises", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Promises_Pieces_PieceId",
                        column: x => x.PieceId,
                        principalTable: "Pieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_Promises_Plans_PlanId",
                        column: x => x.PlanId,
                        principalTable: "Plans",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateTable(
                name: "StockLedger",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<long>(type: "INTEGER", nullable: false),
                    PieceId = table.Column<Guid>(type: "TEXT", nullable: false),
                    WhenUtc = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Kind = table.Column<int>(type: "INTEGER", nullable: false),
                    Count = table.Column<int>(type: "INTEGER", nullable: false),
                    Length = table.Column<long>(type: "INTEGER", nullable: false),
                    Width = table.Column<long>(type: "INTEGER", nullable: false),
                    Note = table.Column<string>(type: "TEXT", nullable: false),
                    Reason = table.Column<string>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Undoes = table.Column<Guid>(type: "TEXT", nullable: true),
                    FinishId = table.Column<Guid>(type: "TEXT", nullable: true),
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StockLedger", x => x.Id);
                    table.ForeignKey(
                        name: "FK_StockLedger_Finishes_FinishId",
                        column: x => x.FinishId,
                        principalTable: "Finishes",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                    table.ForeignKey(
                        name: "FK_StockLedger_Pieces_PieceId",
                        column: x => x.PieceId,
                        principalTable: "Pieces",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict
                    );
                }
            );

            migrationBuilder.CreateIndex(
                name: "IX_Finishes_PlanId_Layout_Copy",
                table: "Finishes",
                columns: new[] { "PlanId", "Layout", "Copy" },
                unique: true,
                filter: "\"Standing\" = 1"
            );

            migrationBuilder.CreateIndex(name: "IX_Materials_NameKey", table: "Materials", column: "NameKey", unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_PartSteps_ProjectId_Number",
                table: "PartSteps",
                columns: new[] { "ProjectId", "Number" },
                unique: true
            );

            migrationBuilder.CreateIndex(
                name: "IX_Parts_ProjectId_Position",
                table: "Parts",
                columns: new[] { "ProjectId", "Position" }
            );

            migrationBuilder.CreateIndex(name: "IX_Pieces_MaterialId", table: "Pieces", column: "MaterialId");

            migrationBuilder.CreateIndex(name: "IX_Pieces_Tag", table: "Pieces", column: "Tag", unique: true);

            migrationBuilder.CreateIndex(name: "IX_PlanJobs_Number", table: "PlanJobs", column: "Number", unique: true);

            migrationBuilder.CreateIndex(name: "IX_Plans_Number", table: "Plans", column: "Number", unique: true);

            migrationBuilder.CreateIndex(name: "IX_Prices_MaterialId", table: "Prices", column: "MaterialId");

            migrationBuilder.CreateIndex(
                name: "IX_Prices_StoreId_MaterialId_Length_Width",
                table: "Prices",
                columns: new[] { "StoreId", "MaterialId", "Length", "Width" },
                unique: true
            );

            migrationBuilder.CreateIndex(name: "IX_Projects_Code", table: "Projects", column: "Code", unique: true);

            migrationBuilder.CreateIndex(name: "IX_Projects_Number", table: "Projects", column: "Number", unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Promises_PieceId",
                table: "Promises",
                column: "PieceId",
                unique: true,
                filter: "\"Active\" = 1"
            );

            migrationBuilder.CreateIndex(name: "IX_Promises_PlanId", table: "Promises", column: "PlanId");

            migrationBuilder.CreateIndex(name: "IX_StockLedger_FinishId", table: "StockLedger", column: "FinishId");

            migrationBuilder.CreateIndex(name: "IX_StockLedger_Number", table: "StockLedger", column: "Number", unique: true);

            migrationBuilder.CreateIndex(name: "IX_StockLedger_PieceId", table: "StockLedger", column: "PieceId");

            migrationBuilder.CreateIndex(name: "IX_StockLedger_Undoes", table: "StockLedger", column: "Undoes", unique: true);

            migrationBuilder.CreateIndex(name: "IX_Stores_NameKey", table: "Stores", column: "NameKey", unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(name: "Commands");

            migrationBuilder.DropTable(name: "Counters");

            migrationBuilder.DropTable(name: "CutTicks");

            migrationBuilder.DropTable(name: "Facts");

            migrationBuilder.DropTable(name: "PartSteps");

            migrationBuilder.DropTable(name: "Parts");

            migrationBuilder.DropTable(name: "PlanJobs");

            migrationBuilder.DropTable(name: "Prices");

            migrationBuilder.DropTable(name: "Promises");

            migrationBuilder.DropTable(name: "Shop");

            migrationBuilder.DropTable(name: "StockLedger");

            migrationBuilder.DropTable(name: "Projects");

            migrationBuilder.DropTable(name: "Stores");

            migrationBuilder.DropTable(name: "Finishes");

            migrationBuilder.DropTable(name: "Pieces");

            migrationBuilder.DropTable(name: "Plans");

            migrationBuilder.DropTable(name: "Materials");
        }
    }
}
